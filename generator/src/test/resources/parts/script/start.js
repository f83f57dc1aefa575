main([]);
